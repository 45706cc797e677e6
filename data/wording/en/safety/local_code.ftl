comes-first = Your local food code and the person in charge come before anything said here.
