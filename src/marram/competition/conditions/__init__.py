"""The conditions of a competition (Terms of the Competition, Committee Procedures 5A): one schema, read strictly and written back.

Form of play and sides are those that rulings are given under (:mod:`marram.rules.facts.conditions`); what is added here
says how scores become results. What contradicts itself is refused with its reason; what is merely missing is
no fault, but stands in the list of what is still to be done before the first start.
"""
