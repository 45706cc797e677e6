"""The picture of a question: one of the plots, or a plan in time, as the content of a file."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.printing.drawing import as_files
from assistant.printing.plots import Asked, drawer
from rules.model import Request

if TYPE_CHECKING:
    from matplotlib.figure import Figure

PLAN = "plan"


def picture_of(kind: str, question: Request, name: str, now: datetime) -> bytes:
    """The content of a picture. name: of the file, whose ending is its format; now: by which a day of service is told

    raises: NothingDraws where matplotlib is not installed; AssistantError where there is nothing to draw
    """
    if kind == PLAN:
        figure = _plan(question, now)
    else:
        figure = drawer(kind)(Asked(question.elevation_m or 0.0, question.units, question=question))
    (content,) = as_files([figure], Path(name)).values()
    return content


def _plan(question: Request, now: datetime) -> Figure:
    from assistant.planning.ordered import menu_of
    from assistant.planning.plan import Has, plan
    from assistant.planning.serving import serving
    from assistant.printing.plan_drawn import drawn

    served = serving(f"{question.service_day or ''} {question.service_time or ''}", now)
    made = plan(
        menu_of(question), served, elevation_m=question.elevation_m or 0.0, has=Has(ovens=question.ovens or 1),
        made_at=now, solve=False,
    )  # fmt: skip
    return drawn(made, question.units)
