read-in-part = I read the first { $read } characters; ask one thing at a time.
