line =
    Whichever the recipe's acid asks for: soda with buttermilk, honey, brown sugar or natural cocoa, powder with sweet milk;
    height cuts both alike.
paragraph =
    Soda is three to four times as strong and needs an acid; a spoonful more than the acid uses tastes of soap and browns
    deeply. { $gas_swells } Cut either by an eighth to a quarter to begin with, but leave ½ tsp of soda to a cup of sour milk.
equations = { $gas_equation }
