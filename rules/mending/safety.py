"""What a failed dish may do to somebody: told before anything is mended."""

from __future__ import annotations

from collections.abc import Iterator

from rules.foods.dishes import traits_of
from rules.mending.model import Mending
from rules.model import Caution
from rules.safety import safe_temperature

USDA, CANNING, COMMON = ("usda-fsis-safe-temperatures",), ("usda-aib-539",), ("common-practice",)
MEATS = (
    "poultry_pieces", "whole_bird", "ground_meat", "sausage", "tender_cut", "fish", "shellfish", "battered",
    "casserole",
)  # fmt: skip
RAW = ("meat_underdone", "dark_outside_raw_inside", "dough_raw_inside")

OF_SYMPTOM: dict[str, tuple[Caution, ...]] = {
    "jar_lost_seal": (
        Caution(
            "stop",
            "Do not taste it. A jar that lost its seal on the shelf is thrown out unopened, bagged, out of reach of "
            "people and animals: botulism has no look and no smell.",
            CANNING,
        ),
        Caution(
            "warn",
            "A jar found unsealed within 24 hours of canning can go into the refrigerator, or be processed again with "
            "a new lid for the full time of the tested recipe.",
            CANNING,
        ),
    ),
    "jar_cloudy": (
        Caution(
            "stop",
            "Do not taste it. Cloudy liquid, rising bubbles, a spurt or an off smell can mean spoilage or botulism: "
            "throw the jar out unopened, bagged, out of reach of people and animals.",
            CANNING,
        ),
    ),
    "jar_lost_liquid": (
        Caution(
            "warn",
            "A sealed jar that lost some liquid is safe if it had the full tested process; do not open it to top it "
            "up. One that lost half or more goes into the refrigerator and is used within 2 to 3 days. One that did "
            "not seal is not kept on the shelf.",
            ("usda-garden-produce", "nchfp"),
        ),
    ),
    "set_too_loose": (
        Caution(
            "note",
            "Runny jam that was processed and sealed is safe: use it as syrup, or cook it again by a tested recipe "
            "with new lids.",
            ("osu-sp-50-746",),
        ),
    ),
    "yolk_runny": (
        Caution(
            "warn",
            "For small children, the old, the pregnant and the ill cook eggs until white and yolk are firm, 160 °F "
            "(71 °C).",
            USDA,
        ),
    ),
    "fat_foams_or_smokes": (
        Caution(
            "stop",
            "Smoking or foaming fat can catch fire: turn the heat off and do not move the pot. If it burns, put a lid "
            "on it, never water.",
            COMMON,
        ),
    ),
    "no_pressure": (
        Caution(
            "warn",
            "Take the cooker off the heat and let it cool before you touch the lid; never force it. A cooker that "
            "still leaks with a new ring is not used.",
            COMMON,
        ),
    ),
    "culture_stayed_thin": (
        Caution(
            "warn",
            "Milk that stood warm for hours without souring is thrown out; so is anything pink, or with an off smell.",
            COMMON,
        ),
    ),
    "centre_raw": (
        Caution("warn", "Batter that is still raw is not eaten: flour and eggs both carry germs.", COMMON),
    ),
    "boiled_dry": (
        Caution("warn", "Let a pot that has boiled dry cool before you pour anything into it.", COMMON),
    ),
}  # fmt: skip
KIDNEY = Caution(
    "warn",
    "Kidney beans and their kin that are not soft are not safe either: soak them and boil them hard for at least 10 "
    "minutes, better 30, before any slow cooking.",
    ("fda-bad-bug-book", "usu-ask-extension"),
)
COOKER = Caution(
    "warn",
    "Never fill a pressure cooker past two thirds, half for beans and grains; keep the vent clear and let the pressure "
    "fall before you open it.",
    COMMON,
)
HOT_FAT = Caution(
    "warn", "Hot fat burns and catches fire: never above 375 °F (190 °C), never left alone, the lid at hand.", COMMON
)
HOT_SUGAR = Caution("warn", "Hot sugar sticks and burns deep: long sleeves, a deep pot, no children near.", COMMON)


def cautions(mending: Mending) -> tuple[Caution, ...]:
    """The cautions that go with what went wrong and with the changes, gravest first."""
    found = tuple(dict.fromkeys(_cautions(mending)))
    return tuple(sorted(found, key=lambda c: ("stop", "warn", "note").index(c.level)))


def _cautions(mending: Mending) -> Iterator[Caution]:
    bench, symptoms = mending.bench, {s.id for s in mending.symptoms}
    for symptom in mending.symptoms:
        yield from OF_SYMPTOM.get(symptom.id, ())
    if symptoms & set(RAW) and bench.dish_class in MEATS:
        yield _raw(mending)
    if "beans_hard" in symptoms and "lectin" in traits_of(bench.dish, bench.dish_class):
        yield KIDNEY
    if mending.next and mending.next.change.what == "pressure":
        yield COOKER
    if any(row.change.what == "fat_temp" for row in mending.causes[:1]):
        yield HOT_FAT
    if mending.next and mending.next.change.what == "sugar_temp":
        yield HOT_SUGAR


def _raw(mending: Mending) -> Caution:
    bench = mending.bench
    safe = safe_temperature(bench.dish, bench.dish_class)
    chart = "165 °F (74 °C) for poultry, 160 °F (71 °C) for ground meat"
    least = bench.say.temp(safe.temp_c) if safe else chart
    return Caution(
        "stop",
        f"Do not serve it until the middle reads {least} on a thermometer; that is the same at every elevation.",
        USDA,
    )
