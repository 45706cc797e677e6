"""Whole books of recipes for many kitchens at once: every pair of the two converted, as a table.

    parts.py ─► run.py ─► crews.py: threads here, or a Dask cluster ─► guarded.py ─► bench.py, a process ─► writing.py

A part of the work is some recipes for all kitchens and becomes one file; the manifest tells which are done. A bench
converts it recipe by recipe and says which one it begins, so that whoever guards it knows what stopped or killed it.
"""
