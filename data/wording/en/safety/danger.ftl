# What frames the words on a danger, which stand in dangers/.

ask = Ask: { $whom }
