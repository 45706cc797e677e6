"""Learn the table of words that tells topics apart: python -m assistant.understanding.train_topics [--check]

Reads data/utterances/train (Rasa's NLU format), writes data/tables/topic_weights.json.gz. Multinomial logistic
regression with a ridge, by full-batch gradient descent from zero: no chance in it, and a second run writes the same
file. --check writes nothing and prints how well a table learned from four fifths of the examples ranks the others.
"""

from __future__ import annotations

import gzip
import hashlib
import json
import re
import sys
from collections import Counter
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
import srsly  # type: ignore[import-untyped]
from spacy.tokens import Doc

from assistant.understanding import topics
from assistant.understanding.pipeline import read
from rules import catalogue, tables

FOLDER = "utterances/train"
RIDGE = 1e-4
STEPS = 200
RATE = 0.5
FOLDS = 5
SMALLEST_WEIGHT = 0.02
ENTITY = re.compile(r"\[([^\]]+)\](?:\([^)]*\)|\{[^}]*\})")


def examples() -> list[tuple[str, str]]:
    """Topic and sentence of every training example, files in alphabetical order; entity marks are taken off."""
    found = []
    for path in sorted(
        (f for f in tables.data_path(FOLDER).iterdir() if f.name.endswith(".yml")), key=lambda f: f.name
    ):
        for row in srsly.yaml_loads(path.read_text(encoding="utf-8"))["nlu"]:
            lines = [line.strip() for line in row["examples"].splitlines()]
            found += [(row["intent"], ENTITY.sub(r"\1", line[2:])) for line in lines if line.startswith("- ")]
    return found


def fingerprint(pairs: Sequence[tuple[str, str]]) -> str:
    """A short mark of the training examples of the cues and of the concepts."""
    learned_from = [pairs, topics.cues(), tables.read_toml(topics.CONCEPTS)]
    return hashlib.sha256(json.dumps(learned_from).encode()).hexdigest()[:16]


def learn(pairs: Sequence[tuple[str, str]], docs: Sequence[Doc] | None = None) -> dict[str, Any]:
    """The table of weights, ready for JSON."""
    names = list(catalogue.topics())
    docs = docs or [read(sentence) for _, sentence in pairs]
    present = [topics.features(doc) for doc in docs]
    counts = Counter(feature for row in present for feature in row)
    kept = sorted(f for f, n in counts.items() if n > 1 or " " not in f)
    column = {feature: i for i, feature in enumerate(kept)}
    x = np.zeros((len(pairs), len(kept)), dtype=np.float32)
    y = np.zeros((len(pairs), len(names)), dtype=np.float32)
    cues = np.zeros_like(y)
    for i, (topic, _) in enumerate(pairs):
        x[i, [column[f] for f in present[i] if f in column]] = 1.0
        y[i, names.index(topic)] = 1.0
        for cued, score in topics.cue_scores(docs[i]).items():
            cues[i, names.index(cued)] = score
    weight, bias = _descend(x, y, cues)
    table = {
        feature: {str(j): round(float(w), 2) for j, w in enumerate(row) if abs(w) >= SMALLEST_WEIGHT}
        for feature, row in zip(kept, weight, strict=True)
    }
    return {
        "examples": fingerprint(pairs),
        "topics": names,
        "bias": [round(float(b), 2) for b in bias],
        "features": table,
    }


def _descend(x: np.ndarray, y: np.ndarray, offset: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Weights and biases by gradient descent, each feature with its own step (AdaGrad)."""
    weight: np.ndarray = np.zeros((x.shape[1], y.shape[1]), dtype=np.float32)
    bias: np.ndarray = np.zeros(y.shape[1], dtype=np.float32)
    past_weight, past_bias = np.full_like(weight, 1e-8), np.full_like(bias, 1e-8)
    for _ in range(STEPS):
        z = x @ weight + bias + offset
        p = np.exp(z - z.max(axis=1, keepdims=True))
        p /= p.sum(axis=1, keepdims=True)
        error = (p - y) / len(x)
        slope = x.T @ error + RIDGE * weight
        lean = error.sum(axis=0)
        past_weight += slope**2
        past_bias += lean**2
        weight -= RATE * slope / np.sqrt(past_weight)
        bias -= RATE * lean / np.sqrt(past_bias)
    return weight, bias


def cross_validated(pairs: Sequence[tuple[str, str]]) -> tuple[float, float]:
    """Of examples that a table has not seen: the share it ranks right, and the share whose frame fits their topic."""
    docs = [read(sentence) for _, sentence in pairs]
    right = fitting = 0
    for fold in range(FOLDS):
        seen = [i for i in range(len(pairs)) if i % FOLDS != fold]
        made = learn([pairs[i] for i in seen], [docs[i] for i in seen])
        learned = topics.unpacked(made)
        for i in range(fold, len(pairs), FOLDS):
            right += topics.decide(docs[i], learned).id == pairs[i][0]
            fitting += pairs[i][0] in docs[i]._.fitting
    return right / len(pairs), fitting / len(pairs)


def main() -> None:
    """Write the table, or check it."""
    if "--check" in sys.argv[1:]:
        right, fitting = cross_validated(examples())
        print(f"{right:.1%} right of unseen examples, {FOLDS} folds; the frame fits the topic of {fitting:.1%}")
        return
    made = learn(examples())
    path = Path(str(tables.data_path(topics.WEIGHTS)))
    path.write_bytes(gzip.compress(json.dumps(made).encode(), mtime=0))


if __name__ == "__main__":
    main()
