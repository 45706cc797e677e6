"""Household weights as a recipe line gives them, against the USDA Nutrient Database for Standard Reference, Release 28.

The figures are the gram weights of the WEIGHT file by NDB number; the lines are ours. A cup line must give the printed
gram weight to half of its last digit; spoons are compared with the spoon's own row.
"""

import pytest

from assistant.recipes.lines import read_line

pytestmark = pytest.mark.source("usda-sr28")

# NDB number, line, printed grams, half of the last printed digit times the amount
SR28 = [
    ("20081", "1 cup all-purpose flour", 125, 0.5),
    ("20083", "1 cup bread flour", 137, 0.5),
    ("20084", "1 cup cake flour", 137, 0.5),
    ("20080", "1 cup whole wheat flour", 120, 0.5),
    ("19335", "1 cup granulated sugar", 200, 0.5),
    ("19335", "1 tsp granulated sugar", 4.2, 0.05),
    ("19334", "1 cup packed brown sugar", 220, 0.5),
    ("19336", "1 cup powdered sugar", 120, 0.5),
    ("19296", "1 cup honey", 339, 0.5),
    ("19304", "1 cup molasses", 337, 0.5),
    ("19350", "1 cup light corn syrup", 341, 0.5),
    ("01001", "1 cup butter", 227, 0.5),
    ("01001", "1 tbsp butter", 14.2, 0.05),
    ("01001", "1 stick butter", 113, 0.6),
    ("04053", "1 cup olive oil", 216, 0.5),
    ("04044", "1 cup vegetable oil", 218, 0.5),
    ("04031", "1 cup shortening", 205, 0.5),
    ("19165", "1 cup unsweetened cocoa", 86, 0.5),
    ("01077", "1 cup whole milk", 244, 0.5),
    ("01088", "1 cup buttermilk", 245, 0.5),
    ("01053", "1 cup heavy cream", 238, 0.5),
    ("01056", "1 cup sour cream", 230, 0.5),
    ("01116", "1 cup plain yogurt", 245, 0.5),
    ("14429", "1 cup water", 237, 0.5),
    ("20027", "1 cup cornstarch", 128, 0.5),
    ("08120", "1 cup rolled oats", 81, 0.5),
    ("19080", "1 cup semisweet chocolate chips", 168, 0.5),
    ("16098", "1 cup peanut butter", 258, 0.5),
    ("18369", "1 tsp baking powder", 4.6, 0.05),
    ("18372", "1 tsp baking soda", 4.6, 0.05),
    ("18373", "1 tsp cream of tartar", 3.0, 0.05),
    ("02047", "1 tsp salt", 6.0, 0.05),
    ("02047", "1 tbsp salt", 18.0, 0.1),
    ("18375", "1 tsp active dry yeast", 4.0, 0.05),
    ("02050", "1 tsp vanilla extract", 4.2, 0.05),
    ("01123", "1 large egg", 50, 0.5),
    ("01123", "1 medium egg", 44, 0.5),
    ("01123", "1 small egg", 38, 0.5),
    ("01123", "1 extra-large egg", 56, 0.5),
    ("01123", "1 jumbo egg", 63, 0.5),
    ("01124", "1 egg white", 33, 0.5),
    ("01125", "1 egg yolk", 17, 0.5),
    ("20044", "1 cup long-grain white rice", 185, 0.5),
    ("16042", "1 cup dried pinto beans", 193, 0.5),
    ("16014", "1 cup dried black beans", 194, 0.5),
]


@pytest.mark.parametrize(("ndb", "line", "grams", "within"), SR28, ids=[row[1] for row in SR28])
def test_household_weight(ndb, line, grams, within):
    assert read_line(line).mass_g == pytest.approx(grams, abs=within), f"NDB {ndb}"


@pytest.mark.parametrize("item", ["salt", "baking powder", "baking soda"])
def test_spoons_of_powders_agree(item):
    """SR28 prints the tablespoon at three teaspoons for salt, soda and powder, within its rounding."""
    tsp, tbsp = read_line(f"1 tsp {item}").mass_g, read_line(f"1 tbsp {item}").mass_g
    assert tbsp == pytest.approx(3 * tsp, rel=0.02)
