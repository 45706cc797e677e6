"""What any fire warns of, whatever is cooked over it."""

from __future__ import annotations

from rules.model import Caution
from rules.said import sentences

say = sentences("heat/fire")

OUTDOORS = Caution("warn", say("outdoors"), ("common-practice",))
