"""Story: several incidents of one event put together: the penalties in total (Rule 1.3c(4)), which ball counts, and what can still be corrected."""
