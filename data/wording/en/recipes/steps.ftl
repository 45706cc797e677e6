too-small-to-keep = The change is smaller than a cook can keep to.
