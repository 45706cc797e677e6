"""Reads recipes as people have them, and writes them out again."""
