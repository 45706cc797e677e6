"""One module a topic that is not answered by a cooking method. File name = topic word = registry id."""
