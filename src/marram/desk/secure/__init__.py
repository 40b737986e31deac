"""A secure connection on a network without internet: the club's own certificate authority, and the certificate of this machine."""
