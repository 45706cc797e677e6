"""The validator's part on danger: concepts, hazards, and a sentence for each."""

from __future__ import annotations

from collections.abc import Iterator

from rules import tables
from rules.errors import RulesError

FOLDER, WORDING = "lexicon/danger", "wording/en/dangers"
CONCEPT_KEYS = {"kind", "words", "stays", "names", "not_before", "not_after"}
HAZARD_KEYS = {
    "id",
    "when",
    "unless",
    "psi",
    "hours",
    "subject",
    "beside",
    "within",
    "soft",
    "minutes",
    "lasting",
    "elevation_m",
}


def problems() -> Iterator[tuple[str, str, str]]:
    """File, row and what is wrong with it, for every fault."""
    from assistant.reading.text import fold
    from assistant.understanding import concepts, hazards, temperatures
    from rules.safety import danger as replies

    rows = concepts.ROW_SETS
    roles = (*temperatures.ROLES, hazards.ANY_ROLE)
    known_keys = HAZARD_KEYS | {f"{before}{role}_f" for role in roles for before in ("", "unless_")}
    home: dict[str, str] = {}
    for name in (concepts.SHARED, *concepts.families()):
        file, read = f"{FOLDER}/{name}.toml", concepts.family(name)
        for id, row in read.get("concept", {}).items():
            if home.setdefault(id, file) != file:
                yield file, id, f"stands in {home[id]} already"
            yield from ((file, id, f'key "{key}" unknown') for key in row.keys() - CONCEPT_KEYS - set(rows))
            yield from (
                (file, id, f'"{w}": write it as it is compared, "{fold(w)}"')
                for w in row.get("words", ())
                if w != fold(w)
            )
            if not row.get("words") and not any(key in row for key in rows):
                yield file, id, "nothing tells it: no words and no rows"
        for row in read.get("hazard", ()):
            yield from ((file, row["id"], f'key "{key}" unknown') for key in row.keys() - known_keys)
    try:
        rows_read = hazards.hazards()
        told = replies.dangers()
    except (RulesError, TypeError, KeyError) as fault:
        yield FOLDER, "rows", str(fault)
        return
    wanted = {h.id for h in rows_read if h.subject is None} | {f"general_{name}" for name in concepts.families()}
    yield from ((WORDING, id, "no sentence for this hazard") for id in sorted(wanted - told.keys()))
    yield from ((WORDING, id, "no such hazard") for id in sorted(told.keys() - wanted))
    sources = tables.sources()
    for id, row in told.items():
        yield from ((WORDING, id, f'source "{source}" unknown') for source in row.sources if source not in sources)
        try:
            replies.worded(row, "us")
        except (KeyError, ValueError, IndexError) as fault:
            yield WORDING, id, f"a placeholder that is none: {fault}"
