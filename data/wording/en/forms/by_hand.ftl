# $of: what is judged by hand, a test of hand_tests_common-practice.csv
test =
    { $of ->
        [yogurt] By hand: heat the milk until it steams, creeps up at the rim and wears a skin, and keep it there some minutes without a boil. Let it cool until a clean finger can stay in it for ten seconds and a drop on the wrist is just warm; then stir in the culture.
        [custard] By hand: baked, its edge is set, the middle trembles as one piece and a knife halfway in comes out clean; stirred, it coats the back of a spoon and the line of a finger through it stays open.
        [jam] By hand: two drops run together and fall as one sheet from a cool spoon, or a drop on a cold plate wrinkles when you push it. Both tests hold at any height.
        [fat] By hand: a cube of white bread turns golden in about a minute, and a dry wooden spoon held in the fat bubbles steadily. Browned in 20 seconds, or smoking, it is too hot: off the heat with it, and no water near it.
        [poaching] By hand: bubbles cling to the bottom and the water shivers, and none breaks at the top.
        [proofing] By hand: water for yeast feels neither warm nor cold on the wrist, or barely warm.
        [bath] A bath cannot be kept by hand: nobody can feel whether it is hot enough to be safe. Cook it at a simmer or in the oven instead.
       *[holding] By hand nothing proves that food is held hot enough: keep what can simmer at a bare simmer, lid on, and serve the rest at once.
    }
# $signs: what shows that it is done, a sentence of the dish classes
signs = By hand: { $signs }
