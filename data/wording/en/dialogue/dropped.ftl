# The dish that is talked of is dropped; the place stays.
gone = No more of the { $dish }, then. What is next?
