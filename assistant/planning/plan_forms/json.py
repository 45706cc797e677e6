"""The JSON contract of a plan: `simmerline schedule --format json`."""

from __future__ import annotations

import json
from typing import Any

from assistant.planning.forms import Form
from assistant.planning.plan import Course, Plan, Work
from assistant.planning.plan_forms.text import as_text
from assistant.replies.sentences import worded
from rules.model import Units

SCHEMA = 1


def as_json(plan: Plan, units: Units = "us") -> dict[str, Any]:
    """The plan as plain JSON values: moments in ISO 8601 with their offset, stretches in minutes."""
    every = zip(plan.courses, plan.early_min, strict=True)
    return {
        "schema": SCHEMA,
        "title": plan.title,
        "elevation_m": round(plan.elevation_m, 1),
        "covers": plan.covers,
        "service": plan.service.isoformat(),
        "zone": getattr(plan.service.tzinfo, "key", None),
        "kitchen": {
            "ovens": plan.has.ovens,
            "shelves": plan.has.shelves,
            "burners": plan.has.burners,
            "cooks": plan.has.cooks,
        },
        "fits": plan.fits,
        "how": plan.how,
        "dishes": [_dish(plan, n, course, early) for n, (course, early) in enumerate(every)],
        "work": [_work(plan, work, units) for work in plan.work],
        "past": [{"dish": course.name, "ready": ready.isoformat()} for course, ready in plan.past],
        "faults": [worded(fault, units) for fault in plan.faults],
        "notes": [worded(note, units) for note in plan.notes],
        "text": as_text(plan, units),
    }


def _dish(plan: Plan, at: int, course: Course, early_min: int) -> dict[str, Any]:
    return {
        "dish": course.name,
        "covers": course.request.portions,
        "ready": plan.at(early_min).isoformat(),
        "ready_before_service_min": early_min,
        "keeps_min": course.keeps.most_min,
        "waits": course.keeps.way,
        "sooner_min": round(course.sooner_min, 1),
        "later_min": round(course.later_min, 1),
        "kept_from": list(plan.late.get(at, ())),
    }


def _work(plan: Plan, work: Work, units: Units) -> dict[str, Any]:
    stage = work.stage
    return {
        "dish": work.course.name,
        "stage": stage.id,
        "what": worded(stage.step, units),
        "begin": plan.at(work.from_min).isoformat(),
        "till": plan.at(work.to_min).isoformat(),
        "begin_before_service_min": work.from_min,
        "till_before_service_min": work.to_min,
        "low_min": round(stage.low_min, 1),
        "high_min": round(stage.high_min, 1),
        "hands_min": work.hands_min,
        "uses": [{"thing": thing, "number": number} for thing, number in work.units],
        "sources": list(stage.sources),
    }


def _written(plan: Plan, units: Units) -> bytes:
    return (json.dumps(as_json(plan, units), ensure_ascii=False, indent=2) + "\n").encode()


FORM = Form(ending=".json", write=_written)
