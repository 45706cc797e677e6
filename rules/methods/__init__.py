"""One module a cooking method. File name = method word = registry id."""
