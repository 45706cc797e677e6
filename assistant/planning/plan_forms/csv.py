"""Comma-separated values: a row a stage, times in ISO 8601."""

from __future__ import annotations

import csv
import io

from assistant.planning.forms import Form
from assistant.planning.plan import Plan
from assistant.planning.plan_view import place_name
from assistant.replies.one_line import cell
from assistant.replies.sentences import worded
from rules.model import Units

COLUMNS = ("begin", "till", "begin_before_service_min", "till_before_service_min", "dish", "stage", "what", "where",
           "hands_min")  # fmt: skip


def as_csv(plan: Plan, units: Units = "us") -> str:
    """The plan under a row of column names, the earliest first."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\n")
    table.writerow(COLUMNS)
    for work in plan.work:
        where = ", ".join(place_name(unit, plan) for unit in work.units)
        begin, till = (plan.at(minutes).isoformat() for minutes in (work.from_min, work.to_min))
        texts = (cell(text) for text in (work.course.name, work.stage.id, worded(work.stage.step, units), where))
        table.writerow((begin, till, work.from_min, work.to_min, *texts, work.hands_min))
    return out.getvalue()


def _written(plan: Plan, units: Units) -> bytes:
    return as_csv(plan, units).encode()


FORM = Form(ending=".csv", write=_written)
