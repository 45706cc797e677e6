"""What Rasa is told about simmerline: the files of data/rasa, made from the catalogue of questions.

python -m assistant.contributing rasa-domain writes them; a test says when they are stale.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from assistant.dialogue.slots import NAMES, PIECE
from rules.catalogue import topics

FOLDER = "data/rasa"
VERSION = "3.1"
FORM = "piece_form"
FALLBACK = "nlu_fallback"
ACTIONS = ("action_answer", f"action_ask_{PIECE}", f"validate_{FORM}", "action_ring")
# what Rasa sends itself when a timer is up; nobody says it
TIMER_UP = "EXTERNAL_timer_up"
SESSION_MIN = 720


def domain() -> dict[str, Any]:
    """The domain: an intent a topic, the slots of the memory, the form that asks for a missing piece."""
    unread: dict[str, Any] = {"type": "any", "influence_conversation": False, "mappings": [{"type": "custom"}]}
    in_form = {"active_loop": FORM, "requested_slot": PIECE}
    return {
        "version": VERSION,
        "session_config": {"session_expiration_time": SESSION_MIN, "carry_over_slots_to_new_session": True},
        "intents": [*topics(), FALLBACK, TIMER_UP],
        "slots": {name: dict(unread) for name in NAMES}
        | {PIECE: {**unread, "mappings": [{"type": "from_text", "conditions": [in_form], "not_intent": TIMER_UP}]}},
        "forms": {FORM: {"required_slots": [PIECE]}},
        "actions": list(ACTIONS),
    }


def rules() -> dict[str, Any]:
    """The rules: every utterance is answered; while a piece is awaited, the form does it; a timer rings by itself."""
    every = [{"intent": name} for name in (*topics(), FALLBACK)]
    return {
        "version": VERSION,
        "rules": [
            {"rule": "every utterance is answered", "steps": [{"or": every}, {"action": ACTIONS[0]}]},
            {"rule": "a timer that is up rings", "steps": [{"intent": TIMER_UP}, {"action": ACTIONS[3]}]},
            {
                "rule": "the piece that was asked for is given",
                "condition": [{"active_loop": FORM}],
                "steps": [{"action": FORM}, {"active_loop": None}],
            },
        ],
    }


def files() -> dict[str, str]:
    """Name of a file of data/rasa -> its text, those that are made."""
    return {"domain.yml": as_yaml(domain()), "rules.yml": as_yaml(rules())}


def write() -> list[Path]:
    """Write the files that are made, and give their paths.

    raises: FileNotFoundError where simmerline does not run from a checkout
    """
    folder = Path(__file__).parents[2] / FOLDER
    paths = []
    for name, text in files().items():
        (folder / name).write_text(text, encoding="utf-8")
        paths.append(folder / name)
    return paths


def as_yaml(content: dict[str, Any]) -> str:
    """YAML with a first line that says where it comes from."""
    import io

    import ruamel.yaml

    writer = ruamel.yaml.YAML()
    writer.representer.ignore_aliases = lambda _: True
    writer.indent(mapping=2, sequence=4, offset=2)
    out = io.StringIO()
    writer.dump(content, out)
    return f"# Made by python -m assistant.contributing rasa-domain; change data/lexicon/topics.toml.\n{out.getvalue()}"
