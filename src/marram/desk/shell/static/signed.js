// What a script sends carries the signature of this device, so that no other page can send it.
export function signed(headers = {}) {
  const signature = document.querySelector('meta[name="csrf"]')?.content;
  return signature ? { ...headers, "X-CSRF-Token": signature } : headers;
}
