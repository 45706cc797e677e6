# What so many people take. $state: dry, raw and so on; $wet: whether its liquid is told
for-guests =
    For { $guests }: about { $raw } of { $state ->
        [dry] dry { $food }
        [raw] raw { $food }
        [bone_in] bone-in { $food }
        [unpeeled] unpeeled { $food }
       *[other] { $food }
    }{ $wet ->
        [yes] { " " }and { $water } of { $liquid }.
       *[no] .
    }
