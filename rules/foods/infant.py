"""Food for infants: formula and breast milk. Cautious, and the doctor's word stands above ours."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure

INFANT = "infant_formula"
MIX_C = 70.0
DOCTOR = Caution(
    "warn",
    "Follow the label and the advice of your doctor, above all for a baby under two months, born early, or ill. Some "
    "formulas must not be mixed hot.",
    ("who-formula-2007",),
)


@rule("infant.formula", "who-formula-2007")
def formula(case: Case) -> Part | None:
    """Powdered formula: hot water to mix, used at once."""
    if case.dish_class != INFANT or case.request.dish == "breast milk":
        return None
    hot = case.say.temp(MIX_C)
    return Part(
        figures=(
            celsius("mix_temperature", "Mix powdered formula with water at or above", MIX_C, MIX_C),
            Figure("use_within", "Once mixed and not chilled, use within", 120.0, "min"),
            Figure("keep_cold_time", "Chilled at once, keep no longer than", 1440.0, "min"),
        ),
        headline=f"Mix infant formula with boiled water no cooler than {hot}, cool it and feed at once; do not keep "
        "it warm.",
        steps=(
            f"Boil fresh water, let it stand no longer than 30 min so that it is still {hot} or hotter, and mix by "
            "the label.",
            "Cool the closed bottle under running water, test a drop on the wrist, feed, and throw away what is left "
            "after 2 h.",
        ),
        because=f"Powder is not sterile, and water at {hot} kills what may grow in it. Water boils well above that "
        "wherever people live, so the temperature is the same at every elevation.",
        cautions=(DOCTOR,),
    )


@rule("infant.breast_milk", "from-memory")
def breast_milk(case: Case) -> Part | None:
    """Breast milk: how long it keeps, the same everywhere."""
    if case.dish_class != INFANT or case.request.dish != "breast milk":
        return None
    return Part(
        figures=(
            Figure("use_within", "At room temperature, use within", 240.0, "min"),
            Figure("keep_cold_time", "In the refrigerator, keep no longer than", 5760.0, "min"),
        ),
        headline="Breast milk keeps up to 4 h at room temperature and 4 days in the refrigerator, the same at any "
        "elevation.",
        steps=("Warm it in a bowl of warm water, never in a microwave oven, and test a drop on the wrist.",),
        cautions=(DOCTOR,),
    )
