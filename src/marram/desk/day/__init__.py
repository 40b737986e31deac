"""The shell of the whole day: which rooms somebody finds, in which order at this hour, and the first screen with what is needed now."""
