pops-label = Kernels pop at
moisture-label = Moisture they need
keep = Keep kernels in a tight jar, not in the bag they came in and not in the refrigerator, which is dry.
moisten =
    If many stay unpopped, shake 3 cups (700 ml) of kernels with 1 tbsp (15 ml) of water in a closed jar, and again now
    and then; use them after two or three days.
in-a-pan =
    Cover the pan with the lid ajar, so that the steam gets out and the heat stays in, and stop when pops come two
    seconds apart.
pops =
    A kernel bursts when the steam inside reaches about { $bars } bar, at { $temp }. Against that the weight of the air
    outside hardly counts, so the heat is the same everywhere. What fails at elevation is the kernel: in dry air it
    loses the little water it pops with.
larger =
    Corn popped under lower pressure comes out larger, since the foam swells against less air. That is a small gift, as
    long as the kernels are moist.
hot-fat = Never leave popcorn over the heat; open the lid away from you, since the steam burns.
