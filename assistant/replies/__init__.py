"""Answer -> text, spoken line and JSON. Wording lives in templates/, not in code."""

from assistant.replies.contract import as_json
from assistant.replies.wording import dress, line, sections

__all__ = ["as_json", "dress", "line", "sections"]
