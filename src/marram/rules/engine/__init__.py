"""How the Rules run: facts, cases, provisions, the tree of all paths, its graph, and the interview."""
