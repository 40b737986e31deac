"""Provisions of Model Local Rules, in force only where the Committee adopts them: one file per area of their code."""
