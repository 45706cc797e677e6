kept-in-a-conversation = Timers are kept in a conversation: begin one, and ask there.
label = Timer
headline = A timer of { $time }: timers are kept in a conversation, so begin one and say this there.
