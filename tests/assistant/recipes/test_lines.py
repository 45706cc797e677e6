"""Ingredient lines. Weights by hand: the stated grams, 1 oz = 28.3495 g, 1 lb = 453.592 g, the cups of USDA SR28."""

import pytest

from assistant.recipes.lines import read_line

# line, amount, high, unit, item, mass [g]
LINES = [
    ("2 1/4 cups all-purpose flour", 2.25, None, "cup", "all-purpose flour", 281.25),
    ("2-1/4 cups all-purpose flour", 2.25, None, "cup", "all-purpose flour", 281.25),
    ("2¼ cups all-purpose flour", 2.25, None, "cup", "all-purpose flour", 281.25),
    ("2 ¼ cups of all-purpose flour", 2.25, None, "cup", "all-purpose flour", 281.25),
    ("2 1⁄4 c. flour", 2.25, None, "cup", "all-purpose flour", 281.25),
    ("2–3 cups flour", 2, 3, "cup", "all-purpose flour", 250),
    ("2 to 3 cups flour, plus more for dusting", 2, 3, "cup", "all-purpose flour", 250),
    ("1 cup to 1 1/4 cups water", 1, 1.25, "cup", "water", 237),
    ("6 to 8 tablespoons ice water", 6, 8, "tbsp", "water", 88.8),
    ("280 g (2 1/4 cups) all-purpose flour", 280, None, "g", "all-purpose flour", 280),
    ("2 1/4 cups (280 g) all-purpose flour", 2.25, None, "cup", "all-purpose flour", 280),
    ("2 1/4 cups/280 g all-purpose flour", 2.25, None, "cup", "all-purpose flour", 280),
    ("2 1/4 cups [280 g] all-purpose flour", 2.25, None, "cup", "all-purpose flour", 280),
    ("2 1/4 cups all-purpose flour (280 g)", 2.25, None, "cup", "all-purpose flour", 280),
    ("1 cup plus 2 tbsp (141 g) all-purpose flour", 1, None, "cup", "all-purpose flour", 141),
    ("1 cup (125 g) plus 2 tbsp (16 g) all-purpose flour", 1, None, "cup", "all-purpose flour", 141),
    ("1 stick butter, softened", 1, None, "stick", "butter", 113.5),
    ("1 cup (2 sticks; 227 g) unsalted butter", 1, None, "cup", "butter", 227),
    ("1 1/2 T butter", 1.5, None, "tbsp", "butter", 21.3),
    ("1 1/2 t salt", 1.5, None, "tsp", "salt", 9),
    ("½ tsp. vanilla", 0.5, None, "tsp", "vanilla extract", 2.1),
    ("3 large eggs", 3, None, None, "egg", 150),
    ("1 c. br. sugar, packed", 1, None, "cup", "brown sugar", 220),
    ("1 t. soda", 1, None, "tsp", "baking soda", 4.6),
    ("3 c. oats", 3, None, "cup", "rolled oats", 243),
    ("2 lg. eggs", 2, None, None, "egg", 100),
    ("1 200 g milk", 1200, None, "g", "whole milk", 1200),
    ("1 400 g can tomatoes", 1, None, "can", "tomatoes", 400),
    ("3 large eggs (50 g each)", 3, None, None, "egg", 150),
    ("2 extra-large eggs, beaten", 2, None, None, "extra large egg", 112),
    ("3 small eggs", 3, None, None, "small egg", 114),
    ("2 dozen eggs", 24, None, None, "egg", 1200),
    ("Eggs: 3", 3, None, None, "egg", 150),
    ("6 egg whites", 6, None, None, "egg white", 198),
    ("an egg yolk", 1, None, None, "egg yolk", 17),
    ("2 (14 oz) cans coconut milk", 2, None, "can", "coconut milk", 793.787),
    ("2 14-oz. cans coconut milk", 2, None, "can", "coconut milk", 793.787),
    ("one 28-ounce can crushed tomatoes", 1, None, "can", "crushed tomatoes", 793.787),
    ("2 x 400 g tins tomatoes", 2, None, "can", "tomatoes", 800),
    ("1 packet (7 g) active dry yeast", 1, None, "packet", "active dry yeast", 7),
    ("1 lb. 4 oz beef chuck, cubed", 1, None, "lb", "beef chuck", 566.99),
    ("1 1/2 pounds (680 g) beef chuck", 1.5, None, "lb", "beef chuck", 680),
    ("4 short ribs (about 12 oz each)", 4, None, None, "short ribs", 1360.777),
    ("0,5 l water", 0.5, None, "l", "water", 500.9),
    ("250 ml water", 250, None, "ml", "water", 250.4),
    ("1,000 g bread flour", 1000, None, "g", "bread flour", 1000),
    ("Bread flour: 1,000 g", 1000, None, "g", "bread flour", 1000),
    ("Bread flour\t1000 g", 1000, None, "g", "bread flour", 1000),
    ("bread flour, 2 cups", 2, None, "cup", "bread flour", 274),
    ("5# bread flour", 5, None, "lb", "bread flour", 2267.96),
    ("half a cup of sugar", 0.5, None, "cup", "granulated sugar", 100),
    ("3/4 cup light or dark brown sugar, packed", 0.75, None, "cup", "brown sugar", 165),
    ("120 g salted or unsalted butter", 120, None, "g", "butter", 120),
    ("1 red or brown onion, sliced", 1, None, None, "red onion", None),
    ("2 cups almond or oat milk", 2, None, "cup", "almond milk", 480),
    ("4 small or 2 large carrots", 4, None, None, None, None),
    ("2 speckled organic eggs", 2, None, None, "egg", 100),
    ("1 tbsp Hilltop Mill extra virgin olive oil", 1, None, "tbsp", "olive oil", 13.5),
    ("2 tbsp cashew cheese", 2, None, "tbsp", "cashew cheese", None),
    ("3 boneless, skinless chicken thighs, cubed", 3, None, None, "boneless skinless chicken thighs", None),
    ("3 drops lemon juice", 3, None, "drop", "lemon juice", 0.1527),
    ("a knob of butter", 1, None, "knob", "butter", None),
    ("2 slices butter", 2, None, "slice", "butter", None),
    ("3 x 400g/14oz tins chopped tomatoes", 3, None, "can", "chopped tomatoes", 1200),
    ("2 (8-ounce) bars cream cheese", 2, None, None, "cream cheese", 453.592),
    ("5 (about 3 pounds) chicken legs", 5, None, None, "chicken legs", 1360.777),
    ("2 TB sugar", 2, None, "tbsp", "granulated sugar", 25.2),
    ("~3 cups flour", 3, None, "cup", "all-purpose flour", 375),
    ("3 l/2 cups flour", 3.5, None, "cup", "all-purpose flour", 437.5),
    ("Potato - 3 nos", 3, None, "piece", "Potato", None),
    ("Courgette 3 each", 3, None, None, "Courgette", None),
    ("▢ 1 cup milk", 1, None, "cup", "whole milk", 244),
    ("3 egg(s)", 3, None, None, "egg", 150),
    ("1 cup milk (+ 2 tbsp)", 1, None, "cup", "whole milk", 274),
    ("1 cup brown sugar, plus 2 tbsp", 1, None, "cup", "brown sugar", 247.6),
    ("2 eggs + 2 yolks", 2, None, None, "egg", 134),
    ("1 tsp ginger", 1, None, "tsp", "ground ginger", 1.8),
    ("1 tbsp grated ginger", 1, None, "tbsp", "grated ginger", None),
    ("1 cup warm water 105-110 degrees", 1, None, "cup", "water", 237),
    ("1/3 cup pumpkin purée", 1 / 3, None, "cup", "canned pumpkin puree", 81.667),
    ("2 1/2-inch knobs galangal", 2, None, "knob", "galangal", None),
    ("1 boneless 3-4 pound brisket", 1, None, None, "boneless brisket", None),
    ("2 leeks sliced", 2, None, None, "leeks", None),
    ("2 16- ounce packages penne", 2, None, "packet", "penne", 907.185),
    ("2 1b. flour", 2, None, "lb", "all-purpose flour", 907.185),
    ("small to medium potatoes", None, None, None, "medium potatoes", None),
    ("2 yellow, red or green bell peppers", 2, None, None, "yellow red bell peppers", None),
    ("3/4 cup hazelnuts (toasted (90g)", 0.75, None, "cup", "hazelnuts", 90),
    ("large handful of mint", 1, None, "handful", "mint", None),
    ("1 heaping cup sugar", 1, None, "cup", "granulated sugar", 200),
    ("¾ cup packed brown sugar", 0.75, None, "cup", "brown sugar", 165),
    ("100g/3.5oz butter", 100, None, "g", "butter", 100),
    ("1 cup minus 1 tbsp flour", 1, None, "cup", "all-purpose flour", 117.2),
    ("3 eggs plus 2 egg yolks", 3, None, None, "egg", 184),
    ("two 4-oz sticks butter", 2, None, "stick", "butter", 226.8),
    ("1 ¼-ounce packet active dry yeast", 1, None, "packet", "active dry yeast", 7.09),
    ("12 oz bag chocolate chips", 12, None, "oz", "chocolate chips", 340.2),
    ("1-inch piece ginger, peeled", 1, None, None, "ginger", None),
    ("pinch of cayenne", 1, None, "pinch", "cayenne", 0.1375),
    ("2 (#10) cans crushed tomatoes", 2, None, "can", "crushed tomatoes", None),
    ("1 cup 2% milk", 1, None, "cup", None, 244),
    ("flour 100%", 100, None, "percent", "all-purpose flour", None),
    ("water 68 %", 68, None, "percent", "water", None),
    ("2% salt", 2, None, "percent", "salt", None),
    ("salt to taste", None, None, None, "salt", None),
    ("Oil for frying", None, None, None, "vegetable oil", None),
    ("zest of 1 lemon", 1, None, None, "lemon zest", None),
    ("1 cup unicorn dust", 1, None, "cup", "unicorn dust", None),
    ("8 oz cake flour (2 cups)", 8, None, "oz", "cake flour", 226.796),
    ("3 Garlic Cloves, crushed", 3, None, None, "Garlic Cloves", 9),
    ("2 ripe bananas", 2, None, None, "ripe bananas", 236),
    ("Scant 1/2 cup (50 g) (rolled oats)", 0.5, None, "cup", "rolled oats", 50),
    ("3 ears Of Corn", 3, None, "ear", "Corn", None),
    ("1 - 3.9 ounce box instant pudding", 1, None, "box", "instant pudding", 110.563),
    ("1 - 2 lb potatoes", 1, 2, "lb", "potatoes", 453.592),
    ("1 14-  14-ounce can corn", 1, None, "can", "corn", 396.893),
    ("Fine sea salt and black pepper to taste", None, None, None, "Fine sea salt and black pepper", None),
    ("Salt as per taste", None, None, None, "salt", None),
    ('3" nub of ginger', 3, None, None, "ginger", None),
    ("1/2 cup butter flavor shortening", 0.5, None, "cup", "shortening", 102.5),
    ("3 tbsp Irish cream", 3, None, "tbsp", "spirits", 42),
]


@pytest.mark.parametrize(("text", "amount", "high", "unit", "item", "mass_g"), LINES, ids=[row[0] for row in LINES])
def test_line(text, amount, high, unit, item, mass_g):
    line = read_line(text)
    assert line.line == text
    assert (line.amount, line.amount_high, line.unit) == (amount, high, unit)
    assert item is None or line.item == item
    assert line.mass_g == (None if mass_g is None else pytest.approx(mass_g, rel=0.005))


def test_added_measures_are_kept_and_weighed():
    line = read_line("2 1/4 cups plus 2 tbsp all-purpose flour, sifted")
    assert [(m.value, m.unit) for m in line.further] == [(2, "tbsp")]
    assert line.mass_g == pytest.approx(2.375 * 125, rel=0.005)
    assert line.preparation == "sifted"
    assert line.line[line.start : line.end] == "2 1/4 cups plus 2 tbsp"


def test_the_measure_is_marked_where_it_stands():
    line = read_line("Bread flour: 1,000 g, sifted")
    assert line.line[line.start : line.end] == "1,000 g"


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("1 cup sugar, divided", "divided"),
        ("1/2 cup walnuts (optional)", "optional"),
        ("chopped walnuts, if desired", "optional"),
    ],
)
def test_said_of_the_whole_line(text, field):
    line = read_line(text)
    assert getattr(line, field)
    assert line.known


@pytest.mark.parametrize(("text", "low_g", "high_g"), [("2–3 cups flour", 250, 375), ("2 eggs", 100, 100)])
def test_mass_of_a_range(text, low_g, high_g):
    line = read_line(text)
    assert (line.mass_g, line.mass_high_g) == (low_g, high_g)
    assert line.mass_mid_g == (low_g + high_g) / 2


@pytest.mark.parametrize(
    "text", ["apple butter, 1 cup", "1 cup almond flour", "2 cups butter lettuce", "1 cup oat milk"]
)
def test_a_compound_is_not_its_last_word(text):
    assert read_line(text).item not in ("butter", "all-purpose flour", "whole milk")


@pytest.mark.parametrize(
    "text", ["1 cup cold, unsalted butter, cubed", "butter, at room temperature", "soft salted butter"]
)
def test_words_that_leave_an_ingredient_what_it_is(text):
    assert read_line(text).item == "butter"


def test_a_food_known_as_a_dish_gives_its_class_and_keeps_its_name():
    line = read_line("1 lb dried pinto beans, picked over")
    assert (line.item, line.role, line.known) == ("dried pinto beans", "dried_bean", True)


@pytest.mark.parametrize("text", ["", "   ", "x" * 501])
def test_no_line_at_all(text):
    assert read_line(text) is None


@pytest.mark.parametrize(
    "text", ["1/0 cup flour", "((((", "9" * 60 + " cups flour", "½½½ sugar", "cup cup cup", "( 2 cups"]
)
def test_nonsense_is_read_without_harm(text):
    assert read_line(text).line == text
