"""What can be asked: every question of an official stands here once, with typed requests and answers.

The desk and the command line ask these services and decide nothing themselves: what lies here (``lies``), rule a
case (``rulings``), draw its options (``relief``), check a drop (``drops``), propose hole locations (``holes``),
check the marking (``marking``). What is asked is one value with one schema (``case``), written and read back as
the address of a page (``address``) and as JSON (``case_file``).
"""
