// Seals what must not be readable in the database: AES-256-GCM under the operator's key, bound to the workspace it belongs to.

import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';

const form = 'v1';

/** 32 bytes from 64 hexadecimal digits or from base64; undefined where it is neither. */
export const readKey = (text: string): Buffer | undefined => {
  const key = /^[0-9a-f]{64}$/i.test(text) ? Buffer.from(text, 'hex') : Buffer.from(text, 'base64');
  return key.length === 32 && /^[\w+/=-]+$/.test(text) ? key : undefined;
};

export const seal = (key: Buffer, text: string, about: string): string => {
  const iv = randomBytes(12);
  const cipher = createCipheriv('aes-256-gcm', key, iv).setAAD(Buffer.from(about));
  const sealed = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
  return [form, iv.toString('base64'), cipher.getAuthTag().toString('base64'), sealed.toString('base64')].join('.');
};

/** undefined where it was sealed with another key, for another workspace, or was changed since. */
export const unseal = (key: Buffer, sealed: string, about: string): string | undefined => {
  const [version, iv = '', tag = '', content = ''] = sealed.split('.');
  if (version !== form) return undefined;
  try {
    const cipher = createDecipheriv('aes-256-gcm', key, Buffer.from(iv, 'base64'), { authTagLength: 16 }).setAAD(Buffer.from(about));
    cipher.setAuthTag(Buffer.from(tag, 'base64'));
    return Buffer.concat([cipher.update(Buffer.from(content, 'base64')), cipher.final()]).toString('utf8');
  } catch {
    return undefined;
  }
};
