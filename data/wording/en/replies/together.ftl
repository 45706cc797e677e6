# Said after the answers to several questions that were asked at once.
more = Ask about one of them for its steps and reasons.
left-out = I left out “{ $words }”: ask it by itself.
