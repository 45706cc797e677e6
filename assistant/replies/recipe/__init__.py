"""A converted recipe -> text, Markdown, a page to print, JSON and JSON-LD. Wording and layout live in templates/."""

from assistant.replies.recipe.contract import as_json
from assistant.replies.recipe.linked import as_jsonld
from assistant.replies.recipe.pages import as_html, as_markdown, as_text
from assistant.replies.recipe.view import View, view
from assistant.replies.recipe.worded import in_words

__all__ = ["View", "as_html", "as_json", "as_jsonld", "as_markdown", "as_text", "in_words", "view"]
