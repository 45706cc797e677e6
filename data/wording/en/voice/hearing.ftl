# before anything is answered about jars
read-back-jars = Before I answer about jars: I heard “{ $text }”. Is every word and number of it right?
# a number that was not surely heard
read-back = I heard “{ $text }”. Is it { $numbers }?
# where each time something else was heard
read-back-all = I am not sure of this: “{ $text }”. Is it right?
doubt = { $said }, not { $others }
