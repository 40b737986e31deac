"""A club's own certificate authority, made once, and certificates of this machine that it signs.

A phone gives a page no place, no service worker and no camera unless the connection is secure (W3C Secure Contexts), and on
a course network nobody else signs for this machine. Whoever trusts an authority on a phone trusts whoever holds its key; so
this one can sign for nothing but private addresses and names of a local network (RFC 5280, 4.2.1.10, name constraints,
critical), may have no authority below it, and its key never leaves the folder, readable by its owner alone.
"""

import os
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from ipaddress import IPv4Network, IPv6Network, ip_address, ip_network
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from marram.errors import InputError
from marram.said import said
from marram.words.texts import text

PRIVATE: tuple[IPv4Network | IPv6Network, ...] = tuple(
    ip_network(one)
    for one in (
        "10.0.0.0/8",
        "172.16.0.0/12",
        "192.168.0.0/16",
        "169.254.0.0/16",
        "127.0.0.0/8",
        "fc00::/7",
        "fe80::/10",
        "::1/128",
    )
)
"""Addresses of private networks, of one link and of this machine (RFC 1918, 3927, 4193, 4291, 6890)."""
LOCAL_NAMES = ("local", "home.arpa", "internal", "localhost")
"""Names of local networks (RFC 6762, RFC 8375, ICANN's reservation of 2024, RFC 6761)."""
OF_AUTHORITY = timedelta(days=3650)
"""How long the authority holds: ten years (own choice), so that phones trust it once."""
OF_MACHINE = timedelta(days=397)
"""How long a certificate of this machine holds: phones take none that holds longer than 398 days from a public authority; kept here too."""
RENEWED = timedelta(days=60)
"""What is left of it when it is made anew (own choice)."""


@dataclass(frozen=True)
class Secured:
    """Files of a secure connection.

    Attributes:
        authority: the certificate that phones are to trust; it holds no secret.
        certificate: that of this machine.
        key: the key of this machine.
        fingerprint: SHA-256 of the authority's certificate, in pairs, to be compared on the phone.
    """

    authority: Path
    certificate: Path
    key: Path
    fingerprint: str


def secured(folder: Path, names: Sequence[str], club: str, now: datetime | None = None) -> Secured:
    """Return a certificate of this machine for some addresses and names; authority and certificate are made where missing.

    Args:
        folder: where they are kept.
        names: the addresses and names this machine is reached by.
        club: whom the authority is named for.
        now: the time, in UTC.

    Raises:
        InputError: an address is public, or a name is not of a local network; or the folder cannot be written.
    """
    now = now or datetime.now(UTC)
    if wrong := [name for name in names if not _may_sign(name)]:
        raise InputError(
            *(
                said(
                    "{name}: the club's own authority signs for private addresses and for names that end in {known}. "
                    "Give one of these.",
                    name=name,
                    known=", ".join(f".{one}" for one in LOCAL_NAMES),
                )
                for name in wrong
            )
        )
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        authority, key = _authority(folder, club, now)
        certificate = _of_machine(folder, authority, key, names, now)
    except OSError as error:
        raise InputError(
            said(
                "{folder} cannot be used for certificates: {why}.", folder=folder, why=error.strerror or error
            )
        ) from None
    digits = authority.fingerprint(hashes.SHA256()).hex().upper()
    pairs = ":".join(digits[at : at + 2] for at in range(0, len(digits), 2))
    return Secured(folder / "authority.crt", certificate, folder / "machine.key", pairs)


def _may_sign(name: str) -> bool:
    try:
        address = ip_address(name)
    except ValueError:
        return any(name == one or name.endswith(f".{one}") for one in LOCAL_NAMES)
    return any(address in one for one in PRIVATE if one.version == address.version)


def _authority(folder: Path, club: str, now: datetime) -> tuple[x509.Certificate, ec.EllipticCurvePrivateKey]:
    """Return the authority and its key, as kept, or made now."""
    file, secret = folder / "authority.crt", folder / "authority.key"
    if file.exists() and secret.exists():
        return x509.load_pem_x509_certificate(file.read_bytes()), _read_key(secret)
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, text("cli.serve.authority", club=club)[:64])])
    permitted: list[x509.GeneralName] = [x509.IPAddress(one) for one in PRIVATE]
    permitted += [x509.DNSName(one) for one in LOCAL_NAMES]
    made = (
        _begun(name, name, key.public_key(), now, OF_AUTHORITY)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(signs=True), critical=True)
        .add_extension(x509.NameConstraints(permitted, None), critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    _write_key(secret, key)
    file.write_bytes(made.public_bytes(serialization.Encoding.PEM))
    return made, key


def _of_machine(
    folder: Path,
    authority: x509.Certificate,
    signer: ec.EllipticCurvePrivateKey,
    names: Sequence[str],
    now: datetime,
) -> Path:
    """Return the file of a certificate for these names, as kept where it holds long enough, else made anew."""
    file = folder / "machine.crt"
    wanted = [_general(name) for name in dict.fromkeys(names)]
    if file.exists() and (folder / "machine.key").exists():
        kept = x509.load_pem_x509_certificate(file.read_bytes())
        named = kept.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
        if (
            set(wanted) <= set(named)
            and kept.issuer == authority.subject
            and kept.not_valid_after_utc - now > RENEWED
        ):
            return file
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "marram")])
    made = (
        _begun(name, authority.subject, key.public_key(), now, OF_MACHINE)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(signs=False), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectAlternativeName(wanted), critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_public_key(signer.public_key()), critical=False
        )
        .sign(signer, hashes.SHA256())
    )
    _write_key(folder / "machine.key", key)
    file.write_bytes(made.public_bytes(serialization.Encoding.PEM))
    return file


def _begun(
    subject: x509.Name, issuer: x509.Name, public: ec.EllipticCurvePublicKey, now: datetime, holds: timedelta
) -> x509.CertificateBuilder:
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(issuer)
        .public_key(public)
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - timedelta(days=1))
        .not_valid_after(now + holds)
    )


def _usage(*, signs: bool) -> x509.KeyUsage:
    return x509.KeyUsage(
        digital_signature=not signs,
        content_commitment=False,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        key_cert_sign=signs,
        crl_sign=signs,
        encipher_only=False,
        decipher_only=False,
    )


def _general(name: str) -> x509.GeneralName:
    try:
        return x509.IPAddress(ip_address(name))
    except ValueError:
        return x509.DNSName(name)


def _read_key(file: Path) -> ec.EllipticCurvePrivateKey:
    key = serialization.load_pem_private_key(file.read_bytes(), None)
    if not isinstance(key, ec.EllipticCurvePrivateKey):
        raise InputError(
            said("{file} is no key of this authority. Put back the one that was there.", file=file)
        )
    return key


def _write_key(file: Path, key: ec.EllipticCurvePrivateKey) -> None:
    """Write a key so that nobody but its owner ever can read it."""
    content = key.private_bytes(
        serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )
    draft = file.with_suffix(".draft")
    draft.unlink(missing_ok=True)
    with os.fdopen(os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as stream:
        stream.write(content)
    draft.replace(file)


__all__ = ["LOCAL_NAMES", "PRIVATE", "Secured", "secured"]
