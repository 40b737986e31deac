"""What can be asked: every question of an official stands here once, with typed requests and answers.

The desk and the command line ask these services and decide nothing themselves: what lies here (``lies``), what
interferes (``interference``), rule an incident (``rulings``) or a story (``stories``), draw the options (``relief``),
check a drop (``drops``), propose hole locations (``holes``), check the marking (``marking``). What is asked is a case
with one schema (``case``), written and read back as the address of a page (``address``, ``address_case``) and as JSON
(``case_file``); ``event`` reads the competition. Nothing here is imported before it is asked for.
"""
