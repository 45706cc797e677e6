"""Whole books of recipes for many kitchens at once: every pair of the two converted, as a table.

    run.py ─► parts.py (what is to be done) ─► crew of threads, or of a Dask cluster ─► guarded.py ─► bench.py (a process)
                                                                                                        writing.py ─► Parquet
A part of the work is some recipes for all kitchens and becomes one file. A bench converts it recipe by recipe and says
which one it begins, so that whoever guards it knows what has stopped or killed it.
"""
