# before the microphone is opened, and while it is
speak = Speak now, and press Enter when you are done.
heard = I heard: { $text }
mended = Taken “{ $heard }” for “{ $meant }”. Put it right if that is not what you said.
