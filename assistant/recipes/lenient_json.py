"""JSON as people and their programs write it -> what it means.

Strict reading comes first, then without what pages put around their data; what is broken even then is mended by
json-repair, a guess, so the fault is handed back beside what came of it.
"""

from __future__ import annotations

import html
import json
import re
from itertools import accumulate
from typing import Any

from assistant.recipes.errors import RecipeError

# mending takes far longer than reading, and longest where brackets stand in each other
MOST_MENDED, MOST_NESTED = 100_000, 100
_HEAD = re.compile(
    r"""(?:\s|\ufeff|<!--|//[ ]?<!\[CDATA\[|/\*[ ]?<!\[CDATA\[[ ]?\*/|<!\[CDATA\[|/\*(?:(?!\*/).)*\*/|//[^\n]*\n)+""",
    re.VERBOSE | re.DOTALL,
)
_TAILS = (";", "-->", "]]>", "/*]]>*/", "/* ]]> */", "//")
_BRACKETS = re.compile(r"[{}\[\]()]")
_STEP = {**dict.fromkeys("{[(", 1), **dict.fromkeys("}])", -1)}
_ESCAPED_QUOTE = re.compile(r"[{\[]\s*&(?:quot|#34|#x22);")


def unwrapped(text: str) -> str:
    """JSON without the comments, CDATA marks and semicolon that pages put around it.

    >>> unwrapped("<!-- [1] -->"), unwrapped("// <![CDATA[\\n[1];\\n// ]]>")
    ('[1]', '[1]')
    """
    head = _HEAD.match(text)
    text = text[head.end() if head else 0 :].rstrip()
    while tail := next((tail for tail in _TAILS if text.endswith(tail)), None):
        text = text.removesuffix(tail).rstrip()
    return html.unescape(text) if _ESCAPED_QUOTE.match(text) else text


def read(text: str, name: str, *, mend: bool = True) -> tuple[Any, RecipeError | None]:
    """What a text of JSON means, and the fault where it had to be mended.

    name: what to call it in an error; mend: whether to try
    raises: RecipeError where it is not JSON and cannot be mended
    """
    try:
        return json.loads(text, strict=False), None
    except json.JSONDecodeError as error:
        fault = _fault(error, name)
    except (RecursionError, ValueError):
        raise RecipeError(
            name, "the JSON is nested too deeply or holds a number of absurd length", "Take out the recipe alone"
        ) from None
    bare = unwrapped(text)
    try:
        return json.loads(bare, strict=False), None
    except (RecursionError, ValueError):
        found = _mended(bare) if mend else None
    if not isinstance(found, dict | list):
        raise fault
    return found, fault


def loads(text: str, name: str) -> Any:
    """What a text of JSON means, mended where it is broken."""
    return read(text, name)[0]


def fault_in(text: str) -> tuple[int, int] | None:
    """Line and column at which a text of JSON is broken; None where it can be read as it is.

    >>> fault_in('{"a": 1};'), fault_in('{"a": 1,}')
    (None, (1, 9))
    """
    try:
        json.loads(unwrapped(text), strict=False)
    except json.JSONDecodeError as error:
        return error.lineno, error.colno
    except (RecursionError, ValueError):
        return None
    return None


def _fault(error: json.JSONDecodeError, name: str) -> RecipeError:
    return RecipeError(
        name,
        f"the JSON breaks off at line {error.lineno}, column {error.colno} ({error.msg[0].lower()}{error.msg[1:]})",
        "Mend that place, or save the recipe as plain text and try again",
    )


def _mended(text: str) -> Any:
    """What a text that is no JSON was meant to be, as far as can be guessed; None where it is past mending."""
    if len(text) > MOST_MENDED or _depth(text) > MOST_NESTED:
        return None
    import json_repair

    try:
        return json_repair.loads(text, skip_json_loads=True)
    except (ValueError, RecursionError):
        return None


def _depth(text: str) -> int:
    """How deep brackets stand in each other, those in strings counted too."""
    return max(accumulate((_STEP[sign] for sign in _BRACKETS.findall(text)), initial=0))
