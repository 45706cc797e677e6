"""Numbers of sets of questions."""

from __future__ import annotations

import secrets

HIGHEST_SEED = 2**31 - 1
NEW_SEEDS = 10_000


def new_seed() -> int:
    """The number of a set that nobody asked for by its number."""
    return secrets.randbelow(NEW_SEEDS)
