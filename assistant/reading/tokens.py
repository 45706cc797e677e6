"""The tokenizer: numbers, words and signs. Units come apart from their figures (350F, 2h30)."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from spacy.tokens import Doc

if TYPE_CHECKING:
    from spacy.language import Language

TOKEN = re.compile(
    r"""
      \d{1,2}:\d{2}(?!\d)                   # 6:30
    | \d+/\d+                               # 1/2
    | (?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?k(?![a-z])   # 7k, 7.5k
    | \d{1,3}(?:,\d{3})+(?:\.\d+)?          # 7,000
    | \d+[.,]\d+                            # 2.1, 2,1
    | \d+
    | \.\d+
    | [^\W\d_]+(?:'[^\W\d_]+)*              # words, with what's and o'clock
    | [^\w\s]
    | _
    """,
    re.VERBOSE | re.IGNORECASE,
)


class KitchenTokenizer:
    """Cuts cleaned text into a Doc. Stateless but for the shared vocabulary."""

    def __init__(self, nlp: Language) -> None:
        self.vocab = nlp.vocab

    def __call__(self, text: str) -> Doc:
        """The Doc of a text; the norm of a token is its lower-case form without apostrophes."""
        found = list(TOKEN.finditer(text))
        words = [match.group() for match in found]
        spaces = [text[match.end() : match.end() + 1].isspace() for match in found]
        doc = Doc(self.vocab, words=words, spaces=spaces)
        for token in doc:
            token.norm_ = token.lower_.replace("'", "") or "'"
        return doc
