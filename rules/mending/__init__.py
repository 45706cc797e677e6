"""Mending a dish that failed: what most likely lay behind it, and the one change to make next.

Published advice is to change one thing at a time, leavening first, then sugar, then liquid; the log of earlier batches
tells what has been tried, and the next change goes on from there.
"""

from __future__ import annotations

from rules.mending.log import Trial, Tried
from rules.mending.model import Mending, Ranked
from rules.mending.ranking import suggest
from rules.mending.symptoms import Failed, Symptom, all_meant, catalogue, meant, of_dish

__all__ = [
    "Failed", "Mending", "Ranked", "Symptom", "Trial", "Tried", "all_meant", "catalogue", "meant", "of_dish", "suggest",
]  # fmt: skip
