first-of-several = I worked with the first elevation you gave; ask again for this one.
figure-before-town = I worked with the { $here } you gave; { $name } itself stands at { $town }.
