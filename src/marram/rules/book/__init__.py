"""The book: one file per Rule, one function per provision, each reading like the Rule it encodes."""
