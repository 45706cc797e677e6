by-eye =
    { $kind ->
        [poultry] Cut into the thickest part beside the bone: the juices run clear, the flesh is white or brown and opaque to the bone with no glassy pink, it pulls away from the bone, and the leg turns loose in its joint.
        [ground] Cut the thickest one in two: no pink, no red juice, and the same firm grain to the middle.
        [fish] Push a fork into the thickest part and turn: it flakes, and is opaque to the middle with nothing glassy.
        [egg] The white and the yolk are firm right through, or a knife in the middle comes out clean.
       *[meat] Cut into the thickest part: the juices run clear or faintly rose and it is firm and hot to a knife held in it for five seconds. By eye cook it well done.
    } Then give it 5 to 10 minutes more, to be sure.
