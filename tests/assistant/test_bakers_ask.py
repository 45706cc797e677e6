"""Questions of bakers and confectioners, from their words to the first line of the answer."""

import pytest

from assistant.answering import reply_to


@pytest.mark.parametrize(
    ("text", "opens", "holds"),
    [
        # the recipe's own figure of a boiled sugar, and no verdict where none was asked
        ("what do I pull penuche at, 7,000 ft, the book has 238 F", "Take it to 225 °F", "soft ball"),
        ("Italian meringue at 2,240 m, syrup to 120 C at the coast, how far here", "Take it to 112.5 °C", "71"),
        ("chocolate tempering at 3,000 m, what temperatures", "Tempering stays the same", "32 °C"),
        # a reading that the boil does not allow
        ("my book wants 209 F in the rye, it is dry at 9,500 ft", "A moist middle gets no hotter", "Pull it at"),
        # two changes are put up for choice
        ("my loaf cake is raw in the middle, 6,000 ft, 50 min at 350F, more time or heat", "Minutes first", "50 min"),
        ("the sponge rolls fell at 2,000 m, do I whip more or less", "Whip less", "ribbon"),
        ("muffins taste of soda and have tunnels, 2,300 m, soda or stirring", "The leavening first", "%"),
        # whether the place is behind it
        ("my biscuits spread at 6,500 ft, is it the altitude", "Partly the elevation", "sugar"),
        ("the caramel seized when I added the cream, is it the height here at 2,500 m", "Not the elevation", "Warm it"),
        ("my scones spread at 300 m, is it the elevation", "Hardly the elevation", "sugar"),
        # other tins
        ("from two 9 inch rounds to a 13x9 at 5,000 ft, bakes 30 min", "1 pan of 13 × 9 in", "deeper"),
        ("one 20 cm square instead of a 20 cm round at 1,500 m", "1 pan of 8 × 8 in", "shallower"),
        ("9x5 or 8x4 for cornbread at 7,000 ft", "The larger, 1 pan of 9 × 5 in", "half full"),
        # a noun that only tells what kind of bake it is
        ("croissants proof 2 h at the coast, 75 min at 1,700 m, what now", "A rise of 2 h at sea level", "at 1,700 m"),
        ("what changes in an oil cake at 6,000 ft", "For layer cake", "less leavening"),
        # the dough's own two times count more than a table
        ("the ciabatta dough with 6 g instant yeast doubles in 30 min instead of 60 at 6,800 ft, cut the yeast to what",
         "Cut the instant yeast from 6 g to about 3 g", "30 min"),
        ("1.5% fresh yeast, rises in 40 min where it should take 60, 2,100 m, how much less",
         "Cut the fresh yeast from 1.5% to about 1%", "40 min"),
        ("mum's buns with 8 g yeast took 1 hour in La Paz, here at 100 m they need 3 hours to rise, more yeast?",
         "Warm the dough first", "80–86 °F"),
        # which of two
        ("mud cake at 2,300 m, dutched cocoa or natural", "Natural cocoa", "baking powder"),
        ("pots de creme, oven 300 F, at 8,200 ft. Do I pour the bath in hot or cold?", "Boiling water", "tray"),
        ("guava paste card says 75 brix, 2,400 m. brix or thermometer", "Go by the refractometer", "75"),
        ("fan or still oven for chiffon cake at 2,600 m", "Still air", "fan"),
        # several stages at once
        ("soft ball, hard ball and hard crack at 6,000 ft", "At 6,000 ft", "hard crack 289"),
        # an ingredient said short, and the one that the question is of
        ("soda in sponge toffee at 7,000 ft, recipe has 1 tbsp, how much", "Use 2", "baking soda"),
        ("4 eggs, 3 cups flour in the carrot cake, 2,200 m. Is the soda too much?", "Yes: use about 26 % less", "soda"),
        ("scone recipe times 6 at 2,600 m, does the baking powder go up straight?", "No: use", "baking powder"),
        # powder in the flour itself cannot be taken out
        ("200 g self raising, 2 tsp baking powder in the scones, 2,000 m, how much powder", "Use 1", "from the spoon"),
        # isomalt is no sugar
        ("can isomalt get to 168 C in La Paz", "Yes: isomalt gets to", "snaps clean"),
        # the amount of what is asked about
        ("how much yeast for 5 kg flour at 2,200 m, formula 1% yeast", "Use 36 g", "instead of 50 g"),
    ],
)  # fmt: skip
def test_the_answer_opens_with_what_was_asked(text: str, opens: str, holds: str) -> None:
    answer = reply_to(text)
    assert str(answer.headline).startswith(opens), answer.headline
    assert holds in answer.text


@pytest.mark.parametrize(
    ("text", "holds"),
    [
        ("my genoise falls at 2,300 m: 5 eggs, 150 g sugar, 150 g flour, 50 g butter", "131 g of granulated sugar"),
        ("lemon cake sank, 240 g flour, 300 g sugar, 12 g baking powder, at 7,000 ft", "instead of 12 g"),
    ],
)  # fmt: skip
def test_a_formula_that_fails_is_mended_and_not_only_converted(text: str, holds: str) -> None:
    answer = reply_to(text)
    assert answer.request.topic == "troubleshoot"
    assert holds in answer.text


@pytest.mark.parametrize(
    ("text", "struck"),
    [
        ("eclairs caved in at 2,000 m and I never opened the door", "door"),
        ("bundt stuck though I buttered the tin well, 7,000 ft", "Grease the pan"),
        ("tart base soggy at 6,000 ft, I baked it blind", "blind"),
    ],
)
def test_what_was_seen_to_is_not_proposed(text: str, struck: str) -> None:
    told = reply_to(text).text
    assert told
    assert struck not in told


@pytest.mark.parametrize(
    ("text", "never"),
    [
        ("panettone fell while it hung at 1,800 m", "flatbread"),
        ("pavlova weeps and cracks at 1,500 m", "hot filling"),
        ("pecan pie stays liquid at 8,500 ft", "underside"),
        ("basque cheesecake runny at 1,600 m, 210 C 40 min", "4 cm"),
        ("pizza burnt on top, dough raw, 7,000 ft, 600 F", "wider pan"),
        ("angel food at 7,000 ft: 12 whites, 1 1/2 cups sugar, 1 cup cake flour", "Grease well"),
    ],
)
def test_a_rule_of_the_family_that_is_wrong_for_the_dish_stays_away(text: str, never: str) -> None:
    assert never not in reply_to(text).text
