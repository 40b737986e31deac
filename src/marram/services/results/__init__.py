"""A competition with its cards as it stands: results, the close, what is reopened."""
