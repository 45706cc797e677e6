kept-in-a-conversation = I keep no clock here: in a conversation that goes on (simmerline chat) timers run and can be asked after.
label = Timer
headline = A timer of { $time }. I keep no clock here: in a conversation that goes on (simmerline chat) it rings.
headline-for = A timer of { $time } for { $name }. I keep no clock here: in a conversation that goes on (simmerline chat) it rings.
