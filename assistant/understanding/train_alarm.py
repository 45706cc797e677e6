"""Learn the net under the hazards: python -m assistant.understanding.train_alarm

Reads data/utterances/danger (dangerous and harmless examples with their family) and the ordinary questions in
data/utterances/train, writes data/tables/alarm_weights.*. Needs scikit-learn (pip install -e ".[train]"). A second run
writes the same files. `--check` learns from all files but one in turn and prints how the one left out is heard.
"""

from __future__ import annotations

import hashlib
import json
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from assistant.understanding import alarm, concepts, danger
from assistant.understanding import train_topics as topics_train
from assistant.understanding.pipeline import read
from assistant.understanding.scene import Scene
from rules import tables

FOLDER = "utterances/danger"
INVERSE_RIDGE = 0.3
PLAIN_WEIGHT = 0.15
STEPS = 400


@dataclass(frozen=True, slots=True)
class Example:
    """An utterance after others, and its family, HARMLESS for none.

    file: where it stands; weight: how much it counts
    """

    text: str
    context: tuple[str, ...]
    family: str
    file: str
    weight: float = 1.0


def examples() -> list[Example]:
    """Every example with a family, files in alphabetical order."""
    files = sorted(f.name for f in tables.data_path(FOLDER).iterdir() if f.name.endswith(".jsonl"))
    found = []
    for name in files:
        for line in tables.data_path(f"{FOLDER}/{name}").read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            found.append(Example(row["text"], tuple(row.get("context", ())), row["family"], name))
    return found


def plain() -> list[Example]:
    """Ordinary questions in which no hazard is heard."""
    asked = [Example(text, (), alarm.HARMLESS, "", PLAIN_WEIGHT) for _, text in topics_train.examples()]
    return [example for example in asked if not danger.heard_in(read(example.text), Scene()).fired]


def features_of(example: Example) -> list[int]:
    """The rows of the table that an example speaks to."""
    scene = Scene()
    for earlier in example.context:
        scene = danger.listen(read(earlier), scene).scene
    return alarm.rows(danger.heard_in(read(example.text), scene).features)


def learn(sample: Sequence[Example], rows: Sequence[Sequence[int]]) -> Any:
    """A multinomial logistic regression with a ridge; there is no chance in it."""
    from sklearn.linear_model import LogisticRegression

    net = LogisticRegression(C=INVERSE_RIDGE, max_iter=STEPS)
    return net.fit(matrix(rows), [e.family for e in sample], sample_weight=[e.weight for e in sample])


def matrix(rows: Sequence[Sequence[int]]) -> Any:
    """The rows as a sparse matrix of ones."""
    from scipy.sparse import csr_matrix

    ends = np.cumsum([0, *map(len, rows)])
    columns = np.concatenate([np.asarray(row, dtype=np.int32) for row in rows])
    return csr_matrix((np.ones(len(columns)), columns, ends), shape=(len(rows), alarm.COLUMNS))


def fingerprint() -> str:
    """A short mark of all that was learned from, so that a stale table shows."""
    learned_from = [
        [(e.text, e.context, e.family) for e in examples()],
        topics_train.examples(),
        [concepts.family(name) for name in (concepts.SHARED, *concepts.families())],
    ]
    return hashlib.sha256(json.dumps(learned_from).encode()).hexdigest()[:16]


def write(net: Any) -> None:
    """The table as whole numbers of eight bits and their scale."""
    weights = np.vstack([net.coef_.T, net.intercept_]).astype(np.float64)
    scale = float(np.abs(weights).max()) / 127
    folder = Path(str(tables.data_path("tables")))
    np.save(folder / Path(alarm.WEIGHTS).name, np.round(weights / scale).astype(np.int8))
    about = {"classes": list(net.classes_), "scale": scale, "examples": fingerprint()}
    (folder / Path(alarm.ABOUT).name).write_text(json.dumps(about, indent=1) + "\n", encoding="utf-8")


def check(sample: Sequence[Example], rows: Sequence[Sequence[int]]) -> Iterator[str]:
    """For each file of examples, how it is heard by a net that learned from all others."""
    for name in sorted({e.file for e in sample if e.file}):
        kept = [i for i, e in enumerate(sample) if e.file != name]
        left = [i for i, e in enumerate(sample) if e.file == name]
        net = learn([sample[i] for i in kept], [rows[i] for i in kept])
        shares = net.predict_proba(matrix([rows[i] for i in left]))
        alarmed = 1 - shares[:, list(net.classes_).index(alarm.HARMLESS)]
        dangerous = np.array([sample[i].family != alarm.HARMLESS for i in left])
        for mark in (0.15, 0.5, 0.65, 0.75, 0.9):
            heard = alarmed >= mark
            yield f"{name} from {mark}: dangers {heard[dangerous].mean():.2f}, harmless {heard[~dangerous].mean():.2f}"


def main() -> None:
    sample = [*examples(), *plain()]
    rows = [features_of(example) for example in sample]
    if "--check" in sys.argv:
        print("\n".join(check(sample, rows)))
        return
    write(learn(sample, rows))


if __name__ == "__main__":
    main()
