headline = I do not help with distilling spirits: it needs a licence, and vapour, fire and methanol kill.
