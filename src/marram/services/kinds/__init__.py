"""The kinds of entries of the log: what an entry of each kind holds, read strictly before it is added and when it is read.

A kind is added by a file of this folder that holds ``KINDS``; nothing else need name it, but ``HEARS`` of
``desk/people/roles.py`` where others than those who rule are to hear of it. Its words for people stand in the
catalogue under ``log.kind.NAME``.
"""
