"""Preserving in jars: the change that elevation makes to a tested process, and what is refused.

Tables are read as they are printed, by their bands: never interpolated, never extrapolated. A process time is never
made up; the cook brings it from a tested recipe.
"""
