"""Course: the map edited day by day, with its versions, and its marking checked."""
