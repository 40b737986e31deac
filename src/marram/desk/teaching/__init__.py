"""Teaching: questions from the book at permanent addresses, answered without a script."""
