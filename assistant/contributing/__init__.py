"""Helpers for people who change simmerline: python -m assistant.contributing --help."""
