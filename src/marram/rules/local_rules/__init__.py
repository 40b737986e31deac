"""Model Local Rules as a Committee chooses them: the register of published codes, and what may be adopted together."""
