"""The page for the kitchen tablet and its JSON API, on Sanic: `simmerline serve`.

`app.py` puts the application together. A page is a module of `pages/`, a resource of the API a module of `api/`; both
find what they answer with at the desk (`desk.py`), which goes through the rooms that the command line goes through.
What keeps the server safe stands in `guard.py`, `people.py`, `entry.py` and `bodies.py`. Nothing here is imported by
other commands.
"""
