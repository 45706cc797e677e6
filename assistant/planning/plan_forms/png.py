"""The plan as a picture: PNG, drawn by matplotlib."""

from __future__ import annotations

from assistant.planning.forms import Form
from assistant.planning.plan import Plan
from rules.model import Units


def as_png(plan: Plan, units: Units = "us") -> bytes:
    """The picture.

    raises: NothingDraws where matplotlib is not installed
    """
    from assistant.printing.plan_drawn import picture

    return picture(plan, units, "png")


FORM = Form(ending=".png", write=as_png, binary=True)
