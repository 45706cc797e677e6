line =
    A kernel is its own pressure cooker and bursts at about { $pops } anywhere; dry corn, not thin air, leaves kernels
    unpopped.
paragraph =
    The hull holds the steam in until it tears, at about { $pops }, which is set by the hull and not by the sky. At
    that moment the steam presses { $kernel } bar harder than the air { $at }. { $side ->
        [above] Thinner air lets the burst go a little further, so the flakes come out slightly bigger.
        [level] Thinner air would let the burst go a little further.
       *[below] Denser air holds the burst back by a trifle.
    } What the mountains do to popcorn is dry it out, and a kernel without enough water cannot burst. Keep it in a
    tight jar, and shake a spoon of water into a quart (litre) of stale kernels a day or two before.
equations = p_sat at { $pops } less the air outside: { $kernel } bar.
pops-label = Kernels pop at about
belief-does-not-pop = Kernels burst at about { $pops } anywhere; dry mountain air robs them of the water they need.
