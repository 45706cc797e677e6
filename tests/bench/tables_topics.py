"""The topic of a question: our table of words with its frames beside plain classifiers of scikit-learn.

All learn from data/utterances/train. Cross-validated: five folds of those, each seen by none that learned from the
others. Test: data/utterances/test, which nobody learns from, those with a topic and without earlier turns.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import srsly
from tables_shown import cpu_s, library, show

from assistant.understanding import topics
from assistant.understanding.pipeline import pipeline, read
from assistant.understanding.train_topics import FOLDS, cross_validated, examples
from rules import tables

Pairs = list[tuple[str, str]]


def unseen() -> Pairs:
    """Topic and sentence of every test question."""
    found = []
    for path in sorted(tables.data_path("utterances/test").iterdir(), key=lambda one: one.name):
        cases = srsly.yaml_loads(path.read_text(encoding="utf-8"))["cases"]
        found += [(case["topic"], case["text"]) for case in cases if "topic" in case and not case.get("context")]
    return found


def baselines() -> dict[str, Callable[[], Any]]:
    """Classifiers on TF-IDF of words and pairs of words, with plain settings."""
    from sklearn.feature_extraction.text import TfidfVectorizer
    from sklearn.linear_model import SGDClassifier
    from sklearn.naive_bayes import MultinomialNB
    from sklearn.pipeline import make_pipeline
    from sklearn.svm import LinearSVC

    def on_words(classifier: Any) -> Any:
        return make_pipeline(TfidfVectorizer(ngram_range=(1, 2)), classifier)

    return {
        "TF-IDF, logistic regression": lambda: on_words(SGDClassifier(loss="log_loss", alpha=1e-5, random_state=0)),
        "TF-IDF, linear SVM": lambda: on_words(LinearSVC()),
        "TF-IDF, naive Bayes": lambda: on_words(MultinomialNB(alpha=0.1)),
    }


def share(model: Any, asked: Pairs) -> float:
    """The share that a model puts under its topic."""
    said = model.predict([text for _, text in asked])
    return sum(topic == answer for (topic, _), answer in zip(asked, said, strict=True)) / len(asked)


def crossed(make: Callable[[], Any], pairs: Pairs) -> float:
    """The share of unseen examples that a kind of model ranks right, over the same folds as ours."""
    right = 0.0
    for fold in range(FOLDS):
        seen = [pair for i, pair in enumerate(pairs) if i % FOLDS != fold]
        model = make().fit([text for _, text in seen], [topic for topic, _ in seen])
        right += share(model, pairs[fold::FOLDS]) * len(pairs[fold::FOLDS])
    return right / len(pairs)


def table() -> None:
    """Print the table."""
    pairs, asked = examples(), unseen()
    docs = [read(text) for _, text in asked]
    own = sum(topics.decide(doc).id == topic for doc, (topic, _) in zip(docs, asked, strict=True)) / len(asked)
    own_s = cpu_s(lambda: [pipeline()(pipeline().make_doc(text)) for _, text in asked[:100]], 2) / 100
    rows = [
        (
            "simmerline",
            f"{cross_validated(pairs)[0]:.1%}",
            f"{own:.1%}",
            f"{own_s * 1000:.2f} ms",
            "all it hears, not the topic alone",
        )
    ]
    if library("sklearn", "scikit-learn"):
        for name, make in baselines().items():
            model = make().fit([text for _, text in pairs], [topic for topic, _ in pairs])
            each_s = cpu_s(lambda model=model: [model.predict([text]) for _, text in asked[:100]], 2) / 100
            rows.append(
                (
                    name,
                    f"{crossed(make, pairs):.1%}",
                    f"{share(model, asked):.1%}",
                    f"{each_s * 1000:.2f} ms",
                    "the topic",
                )
            )
    show(
        f"Topics, {len(pairs)} examples and {len(asked)} test questions",
        ("model", f"right, {FOLDS} folds", "right, test", "a question", "what it works out"),
        rows,
    )


if __name__ == "__main__":
    table()
