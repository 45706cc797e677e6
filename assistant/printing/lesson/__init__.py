"""What a teacher of cooks hands out: `simmerline lesson THEME`, a sheet for the class and its key apart.

`themes.py` reads what is on each sheet; `why.py`, `table.py`, `worked.py`, `experiment.py` and `drilled.py` work out
its parts, `air_column.py` draws; `sheets.py` puts them together as blocks, and a module of `forms/` writes the blocks.
"""
