"""Learn the net under the hazards: python -m assistant.understanding.train_alarm

Reads data/utterances/danger (examples with their family, and asides: what cooks tell by the way) and
the ordinary questions in data/utterances/train, writes data/tables/alarm_weights.*. Needs scikit-learn
(pip install -e ".[train]"). A second run writes the same files. `--check` learns from all files but one in turn, and
prints how the one left out is heard.
"""

from __future__ import annotations

import hashlib
import json
import sys
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np

from assistant.understanding import alarm, concepts, danger
from assistant.understanding import train_topics as topics_train
from assistant.understanding.pipeline import read
from assistant.understanding.scene import Scene
from rules import tables

FOLDER = "utterances/danger"
ASIDES = f"{FOLDER}/asides.txt"
INVERSE_RIDGE = 0.3
PLAIN_WEIGHT = 0.15
ORDINARY = "ordinary"
STEPS = 400
# every so many examples are heard once more with an aside before or after them, so that asides tell of nothing
WITH_ASIDE = 3
# what makes a concept tell of a family: in so many dangerous examples, so much oftener than in ordinary ones and in
# harmless ones that sound dangerous, and in few of the ordinary
FEWEST_TOLD, TOLD_MORE, TOLD_MORE_THAN_HARMLESS, MOST_ORDINARY = 5, 4.0, 1.5, 0.004


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


def asides() -> tuple[str, ...]:
    """What cooks tell by the way, a sentence a line."""
    lines = tables.data_path(ASIDES).read_text(encoding="utf-8").splitlines()
    return tuple(line for line in lines if line and not line.startswith("#"))


def with_asides(sample: Sequence[Example]) -> Iterator[Example]:
    """Every third example once more, an aside in front of it or behind it; every fifth of them without its signs."""
    told = asides()
    for at, example in enumerate(sample[::WITH_ASIDE]):
        aside = told[at % len(told)]
        text = f"{example.text}. {aside}" if at % 2 else f"{aside} {example.text}"
        yield replace(example, text=text if at % 5 else text.replace(".", "").replace(",", ""))


def telling(sample: Sequence[Example]) -> dict[str, list[str]]:
    """The concepts that tell of each family, by how often examples of each kind name them."""
    named: dict[str, Counter[str]] = defaultdict(Counter)
    total: Counter[str] = Counter()
    for example in sample:
        kind = example.family if example.file else ORDINARY
        total[kind] += 1
        named[kind].update({heard.concept for heard in read(example.text)._.concepts})
    ordinary, harmless = (
        {concept: (named[kind][concept] + 1) / total[kind] for concept in concepts.concepts()}
        for kind in (ORDINARY, alarm.HARMLESS)
    )
    return {
        family: sorted(
            concept
            for concept, times in named[family].items()
            if times >= FEWEST_TOLD
            and named[ORDINARY][concept] <= MOST_ORDINARY * total[ORDINARY]
            and times / total[family] >= TOLD_MORE * ordinary[concept]
            and times / total[family] >= TOLD_MORE_THAN_HARMLESS * harmless[concept]
        )
        for family in concepts.families()
    }


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
        asides(),
        topics_train.examples(),
        [concepts.family(name) for name in (concepts.SHARED, *concepts.families())],
    ]
    return hashlib.sha256(json.dumps(learned_from).encode()).hexdigest()[:16]


def write(net: Any, told: dict[str, list[str]]) -> None:
    """The table as whole numbers of eight bits and their scale, and the concepts that tell of each family."""
    weights = np.vstack([net.coef_.T, net.intercept_]).astype(np.float64)
    scale = float(np.abs(weights).max()) / 127
    folder = Path(str(tables.data_path("tables")))
    np.save(folder / Path(alarm.WEIGHTS).name, np.round(weights / scale).astype(np.int8))
    about = {"classes": list(net.classes_), "scale": scale, "examples": fingerprint(), "telling": told}
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
        for mark in (danger.NEAR_FROM, danger.SPREAD_FROM, danger.ALONE_FROM, danger.SURE_FROM):
            heard = alarmed >= mark
            yield f"{name} from {mark}: dangers {heard[dangerous].mean():.2f}, harmless {heard[~dangerous].mean():.2f}"


def main() -> None:
    told = [*examples(), *plain()]
    sample = [*told, *with_asides(told)]
    rows = [features_of(example) for example in sample]
    if "--check" in sys.argv:
        print("\n".join(check(sample, rows)))
        return
    write(learn(sample, rows), telling(told))


if __name__ == "__main__":
    main()
