"""The tokenizer of the pipeline: the words of the light tokenizer as a Doc."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spacy.tokens import Doc

from assistant.reading.words import TOKEN, norm

if TYPE_CHECKING:
    from spacy.language import Language


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
            token.norm_ = norm(token.text)
        return doc
