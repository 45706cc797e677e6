"""Pages of others: what is shown of a recipe that came as a saved page holds nothing but plain writing."""

from __future__ import annotations

import nh3
from markupsafe import Markup

from assistant.recipes.pages import looks_like_page

# what a recipe is written in; no links, pictures, forms or scripts, and no attribute of any
PLAIN = {
    "p", "br", "h1", "h2", "h3", "h4", "ul", "ol", "li", "dl", "dt", "dd", "table", "thead", "tbody", "tr", "td", "th",
    "b", "strong", "i", "em", "u", "sub", "sup", "blockquote",
}  # fmt: skip
UNHEARD = {
    "title",
    "script",
    "style",
    "template",
    "noscript",
    "svg",
    "math",
    "iframe",
    "object",
    "head",
    "nav",
    "footer",
}


def as_page(text: str) -> Markup:
    """A saved page without all that is not writing; "" for what is no page."""
    if not looks_like_page(text):
        return Markup("")
    clean = nh3.clean(text, tags=PLAIN, clean_content_tags=UNHEARD, attributes={}, strip_comments=True)
    return Markup(clean.strip())


def as_text(content: bytes) -> str:
    """The text of an uploaded file, as far as it is one."""
    for encoding in ("utf-16",) if content.startswith((b"\xff\xfe", b"\xfe\xff")) else ("utf-8-sig", "cp1252"):
        try:
            return content.decode(encoding)
        except UnicodeDecodeError:
            continue
    return content.decode("utf-8", errors="replace")
