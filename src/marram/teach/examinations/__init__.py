"""Referee examinations: papers by a blueprint, parallel forms, marks, and what the candidates' answers say of the items.

``blueprint`` says how many items of each Rule a paper has, ``paper`` draws one and its parallel forms, ``report`` marks it,
``statistics`` finds difficulty, discrimination, distractors and reliability, ``retiring`` says which items go, ``equality``
simulates candidates to see how equal two forms are.
"""
