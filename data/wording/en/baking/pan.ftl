why = { $way ->
    [up]
        Fill pans half full, not two thirds: the batter rises higher at { $place } and would run over. Bake the rest as
        cupcakes or take a larger pan, on the middle rack or just below it. { $foam ->
            [yes] Leave the tin of an angel food or chiffon cake ungreased, and hang it upside down until it is cold.
           *[no] Grease well, or line with paper.
        }
   *[down] The batter rises less at { $place }, so the pan can be filled to two thirds again.
}
