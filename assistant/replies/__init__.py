"""Answer -> text, spoken line and JSON. Wording lives in data/wording and templates/, not in code."""

from assistant.replies.contract import as_json
from assistant.replies.wording import dress, sections

__all__ = ["as_json", "dress", "sections"]
