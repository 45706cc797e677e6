"""Whether the text of JSON that came from outside is text that can be written and kept."""

from __future__ import annotations

import json
import re
from typing import Any

# the only two that JSON lets in and no store takes: half a character, and nothing at all
_ESCAPED = re.compile(rb"\\u(?:d[89a-f]|0000)", re.IGNORECASE)
_NOTHING = re.compile(r"(?<!\\)(?:\\\\)*\\u0000")
NOT_KEPT = "The body holds half a character (\\ud800 to \\udfff) or \\u0000, which is no text; leave it out."


def can_be_kept(body: bytes, value: Any) -> bool:
    r"""Whether all text of a JSON value can be kept. body: it was read from

    >>> bodies = (rb'"\ud83c\udf56"', rb'"\ud83c"', rb'"\u0000"', rb'"\\u0000"')
    >>> [can_be_kept(body, json.loads(body)) for body in bodies]
    [True, False, False, True]
    """
    if not _ESCAPED.search(body):
        return True
    text = json.dumps(value, ensure_ascii=False)
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return not _NOTHING.search(text)
