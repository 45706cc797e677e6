# Said after the answers to several questions that were asked at once.
left-out = I left out “{ $words }”: ask it by itself.
