"""A case: what happened, where and under which conditions; its address and file, and what the Rules say to it."""
