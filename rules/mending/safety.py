"""What a failed dish may do to somebody: told before anything is mended."""

from __future__ import annotations

from collections.abc import Iterator

from rules.foods.dishes import traits_of
from rules.mending.model import Mending
from rules.model import Caution
from rules.safety import safe_temperature
from rules.said import sentences, temp

say = sentences("mending/safety")
USDA, CANNING, COMMON = ("usda-fsis-safe-temperatures",), ("usda-aib-539",), ("common-practice",)
MEATS = frozenset(("poultry", "ground", "whole_cut", "fish", "shellfish", "perhaps_meat"))

OF_SYMPTOM: dict[str, tuple[Caution, ...]] = {
    "jar_lost_seal": (
        Caution("stop", say("jar-lost-seal"), CANNING), Caution("warn", say("jar-found-unsealed"), CANNING),
    ),
    "jar_cloudy": (Caution("stop", say("jar-cloudy"), CANNING),),
    "jar_lost_liquid": (Caution("warn", say("jar-lost-liquid"), ("usda-garden-produce", "nchfp")),),
    "set_too_loose": (Caution("note", say("runny-jam"), ("osu-sp-50-746",)),),
    "yolk_runny": (Caution("warn", say("runny-yolk"), USDA),),
    "fat_foams_or_smokes": (Caution("stop", say("fat-smokes"), COMMON),),
    **dict.fromkeys(("no_pressure", "vent_steams"), (Caution("warn", say("cooker-leaks"), COMMON),)),
    "culture_stayed_thin": (Caution("warn", say("warm-milk"), COMMON),),
    "centre_raw": (Caution("warn", say("raw-batter"), COMMON),),
    "boiled_dry": (Caution("warn", say("boiled-dry"), COMMON),),
}  # fmt: skip
KIDNEY = Caution("warn", say("kidney-beans"), ("fda-bad-bug-book", "usu-ask-extension"))
COOKER = Caution("warn", say("cooker"), COMMON)
# classes that stand in hot fat and in hot sugar, whatever went wrong with them
IN_FAT, OF_SUGAR = ("fried_dough", "battered"), ("candy", "syrup")
HOT_FAT = Caution("warn", say("hot-fat"), COMMON)
HOT_SUGAR = Caution("warn", say("hot-sugar"), COMMON)


def cautions(mending: Mending) -> tuple[Caution, ...]:
    """The cautions that go with what went wrong and with the changes, gravest first."""
    found = tuple(dict.fromkeys(_cautions(mending)))
    return tuple(sorted(found, key=lambda c: ("stop", "warn", "note").index(c.level)))


def _cautions(mending: Mending) -> Iterator[Caution]:
    bench, symptoms = mending.bench, {s.id for s in mending.symptoms}
    for symptom in mending.symptoms:
        yield from OF_SYMPTOM.get(symptom.id, ())
    traits = traits_of(bench.dish, bench.dish_class)
    if any(symptom.raw for symptom in mending.symptoms) and MEATS.intersection(traits):
        yield _raw(mending)
    if "beans_hard" in symptoms and "lectin" in traits:
        yield KIDNEY
    if mending.next and mending.next.change.what == "pressure":
        yield COOKER
    if (
        bench.method == "fry"
        or bench.dish_class in IN_FAT
        or any(c.change.what == "fat_temp" for c in mending.causes[:1])
    ):
        yield HOT_FAT
    if bench.dish_class in OF_SUGAR or (mending.next and mending.next.change.what == "sugar_temp"):
        yield HOT_SUGAR


def _raw(mending: Mending) -> Caution:
    safe = safe_temperature(mending.bench.dish, mending.bench.dish_class)
    text = say("raw-meat", safe=temp(safe.temp_c)) if safe else say("raw-meat-by-kind")
    return Caution("stop", text, USDA)
