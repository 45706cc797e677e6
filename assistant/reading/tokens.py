"""The tokenizer of the pipeline: the words of the light tokenizer as a Doc."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spacy.tokens import Doc
from spacy.vocab import Vocab, create_vocab

from assistant.reading.words import TOKEN, norm

if TYPE_CHECKING:
    from spacy.language import Language


NORMS = "norms"
# all the words that kitchens use, with room, in about 5 MB
MOST_STRINGS = 20_000


def norms(doc: Doc) -> list[str]:
    """The words of an utterance as they are compared, gathered once: making tokens costs more than reading them.

    The list is the document's own: it is read, and only `set_norm` changes it.
    """
    found: list[str] | None = doc.user_data.get(NORMS)
    if found is None:
        found = doc.user_data[NORMS] = [token.norm_ for token in doc]
    return found


def set_norm(doc: Doc, at: int, word: str) -> None:
    """Put another word in the place of one, as which it is compared."""
    norms(doc)[at] = word
    doc[at].norm_ = word


class KitchenTokenizer:
    """Cuts cleaned text into a Doc.

    A vocabulary never forgets a word, and people never run out of new ones, so that it makes way for an empty one now
    and then. A Doc keeps the one it was made with, and matchers go by hashes, which are the same in all of them.
    """

    def __init__(self, nlp: Language) -> None:
        self._language, self._vocab = nlp, nlp.vocab

    def __call__(self, text: str) -> Doc:
        """The Doc of a text; the norm of a token is its lower-case form without apostrophes."""
        found = list(TOKEN.finditer(text))
        words = [match.group() for match in found]
        spaces = [text[match.end() : match.end() + 1].isspace() for match in found]
        if len(self._vocab.strings) > MOST_STRINGS:
            self._vocab = self._empty()
        doc = Doc(self._vocab, words=words, spaces=spaces)
        for token in doc:
            token.norm_ = norm(token.text)
        return doc

    def _empty(self) -> Vocab:
        return create_vocab(self._language.lang, self._language.Defaults)
